/** What stands on the page when this browser keeps nothing for it, as some private windows do. */
export function NoStorage({ reason }: { readonly reason: string }) {
  return (
    <main className="no-storage">
      <h1>Nothing can be kept in this window</h1>
      <p>
        The page keeps workbooks in this browser, and this window does not let it. Open it in an ordinary
        window, or allow the page to store data, and load it again.
      </p>
      {reason === '' ? null : <p className="no-storage-reason">The browser says: {reason}</p>}
    </main>
  );
}
