import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { contentSecurityPolicy } from './scripts/policy.ts';

/** Writes the policy into the built page, so that it holds wherever the page is served from. */
const ownPolicy: Plugin = {
  name: 'stretchout-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
      injectTo: 'head-prepend',
    },
  ],
};

export default defineConfig({
  base: './',
  plugins: [react(), ownPolicy],
  worker: { format: 'es' },
  build: {
    target: 'es2023',
    sourcemap: true,
    // A file written into the page as data: would be stopped by the policy.
    assetsInlineLimit: 0,
    // The grid, the catalogue and what reads files are about 1.7 MB together; the engine loads after the first paint.
    chunkSizeWarningLimit: 1800,
  },
});
