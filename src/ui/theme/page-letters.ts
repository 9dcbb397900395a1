/** Nobody waits longer than this for letters. */
const longest = 1000;

/**
 * Settles when the page's own letters are there, or cannot come soon. A picture drawn before them would be laid out
 * anew when they come: lines break elsewhere, and what somebody is about to press moves.
 */
export async function pageLetters(): Promise<void> {
  const family = getComputedStyle(document.documentElement).getPropertyValue('--font-text');
  const loaded = document.fonts.load(`1rem ${family}`).catch(() => []);
  await Promise.race([loaded, new Promise((resolve) => setTimeout(resolve, longest))]);
}
