import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The app's files go to packages/web/dist; in development /api is answered by a server started beside it. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
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
