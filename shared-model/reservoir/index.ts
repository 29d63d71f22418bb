export type { ChannelWater, DrawDown, DrawDownDay, FirstFill, Rung, SiteWater, StageWater } from './channel-water'
export type { Feed, Salt, Stage, StageGaps, WaterPlan } from './stage'
export { STAGES } from './stage'
