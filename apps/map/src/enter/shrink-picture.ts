/** Longer side of a kept photo, pixels: enough to read a joint by, a few hundred kilobytes (judgement). */
const MOST_PIXELS = 1280;
const QUALITY = 0.7;

/** Size at which a picture is kept: never larger than it is. */
export function keptSize(
  width: number,
  height: number,
  mostPixels = MOST_PIXELS,
): { readonly width: number; readonly height: number } {
  const scale = Math.min(1, mostPixels / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/**
 * A photo as a small JPEG in a data address. It is drawn anew, so that nothing but the picture is left: no place,
 * no device, no time.
 * @throws when the file is no picture that the browser can read.
 */
export async function shrinkPicture(file: Blob, mostPixels = MOST_PIXELS): Promise<string> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const { width, height } = keptSize(picture.width, picture.height, mostPixels);
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no drawing surface');
  context.fillStyle = 'white';
  context.fillRect(0, 0, width, height);
  context.drawImage(picture, 0, 0, width, height);
  picture.close();
  return canvas.toDataURL('image/jpeg', QUALITY);
}
