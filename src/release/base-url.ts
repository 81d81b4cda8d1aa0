// Where a release will be served: an https folder, written with its closing slash.
import { UserFault } from '../cli/user-fault';

/** The address in the sources, for the development server. */
export const DEVELOPMENT = 'https://localhost:3000/';

/** What needs no escaping in an address, XML, JSON or the configuration of a web server. */
const PLAIN_PATH = /^\/([\w.~-]+\/)*$/;

export function baseUrl(text: string): URL {
  if (!URL.canParse(text)) throw new UserFault(`"${text}" is no address; give one as https://example.org/bosswright/`);
  const url = new URL(text);
  if (url.protocol !== 'https:') throw new UserFault(`${text} is not https; Excel loads add-ins from https only`);
  if (url.search !== '' || url.hash !== '' || /[?#]/.test(text))
    throw new UserFault(`${text} has a query or a fragment; give the folder alone`);
  if (url.username !== '' || url.password !== '')
    throw new UserFault('the address has a user name in it; everybody who installs the add-in would read it');
  if (/\.(html?|xml|js|json)$/i.test(url.pathname)) throw new UserFault(`${text} is a file; give the folder that it is in`);
  if (!url.pathname.endsWith('/')) url.pathname += '/';
  if (!PLAIN_PATH.test(url.pathname)) throw new UserFault(`${text}: folders of letters, digits, . _ ~ and - only`);
  return url;
}
