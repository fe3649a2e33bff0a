/** Version of the catalogue: raised whenever a value in `catalogue/` changes, so that an answer names what it rests on. */
export const catalogueVersion = "3";
