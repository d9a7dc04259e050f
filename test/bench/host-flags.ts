/** What `npm start` gives to Node, so that memory and speed are those that a host sees. */
export const HOST_FLAGS = ['--max-semi-space-size=2'] as const;
