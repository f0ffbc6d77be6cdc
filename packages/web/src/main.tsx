import './style/fonts.css';
import './style/base.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/app.tsx';
import { keepViewApplied } from './app/view.ts';
import { queryClient } from './files/queries.ts';

const root = document.getElementById('app');
if (!root) throw new Error('The page lacks its root element.');
keepViewApplied();
createRoot(root).render(
  <StrictMode>
    <QueryClientProvider client={queryClient()}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);
