export { BUILT_IN_ID, defaultWorkshop } from './default-workshop'
export type { Demo } from './demos/demos'
export { DEMOS } from './demos/demos'
export type { Anchor, Design, PartsUsed, PinnedDimension, PinnedNote, Place, YesNo } from './design'
export { DESIGN_SCHEMA } from './design'
export { documentSchema } from './document-schema'
export {
  clearBench,
  cutPiece,
  drillPiece,
  pinPiece,
  shortenBar,
  spoilPiece,
  takeBackBar
} from './edits/bench-edits'
export type { ChannelChanges, NewChannel } from './edits/channel-edits'
export {
  addChannel,
  changeClosure,
  changeProfile,
  copyChannels,
  deleteChannels,
  editChannels,
  layOnSide,
  mirrorChannels,
  mirrorDesign,
  moveChannels,
  placeChannel,
  resizeChannel,
  turnChannel
} from './edits/channel-edits'
export type { Edited } from './edits/edit'
export { addOpening, addSupport, deleteOpening, deleteSupport, editOpening, editSupport } from './edits/fixture-edits'
export type { NewSeat } from './edits/seat-edits'
export {
  addCrop,
  addSeat,
  changeCollar,
  changeCup,
  changePlantCollar,
  changeRiser,
  changeSaw,
  copySeat,
  deleteSeat,
  keepPart,
  measureDailyUse
} from './edits/seat-edits'
export {
  addObstacle,
  deleteObstacle,
  deletePinned,
  editNote,
  editObstacle,
  editPlace,
  editSill,
  editWater,
  pinDimension,
  pinNote,
  standOff
} from './edits/sill-edits'
export type { SiteContents } from './edits/site-edits'
export {
  addSite,
  deleteSites,
  editSites,
  lockSites,
  matchSites,
  moveSite,
  moveSites,
  sitesByCount,
  sitesByPitch,
  spreadSites,
  staggerSites
} from './edits/site-edits'
export type { Row } from './edits/site-row'
export {
  addDrill,
  addOffcut,
  addOffer,
  addSheet,
  addStock,
  addWay,
  deleteFrom,
  deleteWay,
  editCutting,
  editOffcut,
  editOffer,
  editPricing,
  editSheet,
  editSheetSetup,
  editShows,
  editStock,
  editTimes,
  editWay,
  giveUpSaw,
  inOwnCurrency,
  ownSaw,
  setPrice,
  setShelf
} from './edits/workshop-edits'
export { nextId } from './ids'
export type { DocumentJsonSchema } from './json-schema'
export { documentJsonSchemas } from './json-schema'
export { newDesign } from './new-design'
export type { Parsed } from './parse'
export { MOST_DOCUMENT_BYTES, parseDesign, parseDesignText, parseWorkshop, parseWorkshopText } from './parse'
export type { PinnedSpan } from './pinned-span'
export { pinnedSpan } from './pinned-span'
export { printDesign, printWorkshop } from './print'
export type { DesignProblemCodes, DocumentProblem } from './problem'
export { designFault, workshopFault } from './reopening'
export { nextRevision } from './revision'
export { applyFix, setDesignField, setWorkshopField } from './set-field'
export { standOffBounds, standOffWithin } from './stand-off'
export type { Shows, Workshop } from './workshop'
export { WORKSHOP_SCHEMA } from './workshop'
