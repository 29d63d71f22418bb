export default function WorkshopScreen() {
  return null
}
