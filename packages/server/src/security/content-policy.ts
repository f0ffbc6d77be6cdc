import type { FastifyHelmetOptions } from '@fastify/helmet';

const SELF = ["'self'"];
const NONE = ["'none'"];

/** Headers for an app that needs nothing from elsewhere: own scripts, styles, fonts and workers, no frames, no forms. */
export const CONTENT_POLICY: FastifyHelmetOptions = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: NONE,
      scriptSrc: SELF,
      styleSrc: SELF,
      fontSrc: SELF,
      imgSrc: ["'self'", 'data:', 'blob:'],
      connectSrc: SELF,
      workerSrc: SELF,
      manifestSrc: SELF,
      baseUri: NONE,
      formAction: NONE,
      frameAncestors: NONE,
    },
  },
  // The server speaks plain HTTP on this machine or the home network.
  strictTransportSecurity: false,
  referrerPolicy: { policy: 'no-referrer' },
};
