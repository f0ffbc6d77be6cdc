export * from './api/enclosure-routes.ts';
