/** A character of the interface type is about 8.4 px wide; the rest is the room beside it. */
const pixelsPerCharacter = 8.4;
const roomBeside = 20;

export function columnPixels(characters: number): number {
  return Math.round(characters * pixelsPerCharacter) + roomBeside;
}

export function charactersIn(pixels: number): number {
  return Math.round(((pixels - roomBeside) / pixelsPerCharacter) * 10) / 10;
}
