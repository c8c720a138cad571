/** What the search looks through and gives back: the index that the build makes and the page that reads it must agree. */
export const FIND_OPTIONS = {
  fields: ['title', 'kind', 'text'],
  storeFields: ['path', 'title', 'kind', 'text'],
};
