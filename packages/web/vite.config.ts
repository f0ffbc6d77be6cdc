import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { slimBundle } from '../library/build/slim.ts';

/** The worker takes the library without what only its pages show; those come from the server. */
function slimLibrary(): Plugin {
  return {
    name: 'slim-library',
    enforce: 'pre',
    transform: (code, id) =>
      id.endsWith('/library/src/generated/library.ts') ? { code: slimBundle(code), map: null } : undefined,
  };
}

/** The app's files go to packages/web/dist; in development /api is answered by a server started beside it. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [react(), slimLibrary()],
  worker: { format: 'es', plugins: () => [slimLibrary()] },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    // Fonts and pictures stay files of their own: the content policy allows no data: fonts.
    assetsInlineLimit: 0,
  },
  server: {
    host: '127.0.0.1',
    proxy: { '/api': 'http://127.0.0.1:4321' },
  },
});
