/** Version of the engine: rises when its figures move. */
export const ENGINE_VERSION = '0.1.0';
