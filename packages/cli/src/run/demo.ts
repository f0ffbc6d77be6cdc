/** Name of the example that the demo shows. */
export const DEMO = 'beck-bank';
