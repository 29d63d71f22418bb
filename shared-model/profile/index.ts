export type { Profile, ProfileShape, Section } from './profile'
