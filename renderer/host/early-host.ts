import { chooseHost } from './choose-host'

/** Chosen before the rest of the program is set up: what it keeps is fetched meanwhile. */
export const host = chooseHost()
