/**
 * What the page may load and run, for the server's header and for the page's own meta element.
 * Styles may stand in the page because the grid and the formula editor write theirs at run time.
 */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');
