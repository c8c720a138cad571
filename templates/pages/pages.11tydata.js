// Every page says where it goes in its own head: the address is data, worked out before Eleventy starts.
export default {
  permalink: (data) => data.view.head.path,
};
