// The pages of TypeDoc with the policy that every page has: nothing from elsewhere.
import { JSX } from 'typedoc';

const POLICY =
  "default-src 'none'; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self' data:; font-src 'self'";

export const load = app =>
  app.renderer.hooks.on('head.begin', () => JSX.createElement('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }));
