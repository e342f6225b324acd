const IMAGE = /^data:image\/(?:png|jpeg|gif|webp|avif);base64,[A-Za-z0-9+/]+={0,2}$/;

/**
 * A photo as it may stand in a page: the data of an image and nothing else, so that no page asks the network for
 * anything and no drawing with a script in it comes in as a photo.
 */
export const isPicture = (address: string | undefined): address is string =>
  address !== undefined && IMAGE.test(address);
