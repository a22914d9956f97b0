// What the first answer can do without is in a second module beside this one; both are one in the package for bundlers.

// Filled where all is one module.
const WITHIN = {};
let loading = null;

/** The later parts, loaded once; null when they cannot be. */
export function later() {
  return (loading ??= Promise.resolve(WITHIN.parts ?? import(new URL("later.js", import.meta.url)).then(({ parts }) => parts)).then(
    (parts) => parts(tools()),
    (reason) => {
      console.error(`cushion-estimate: ${new URL("later.js", import.meta.url)} could not be loaded: ${reason.message}`);
      loading = null;
      return null;
    },
  ));
}

const packs = new Map();

/** The words of a language, or none when there are none. */
export function wordsOf(tag) {
  if (!packs.has(tag)) {
    const address = new URL(`words/${tag}.json`, import.meta.url);
    const got = WITHIN.words
      ? Promise.resolve(WITHIN.words[tag])
      : fetch(address).then((response) => (response.ok ? response.json() : Promise.reject(new Error(`${response.status}`))));
    packs.set(
      tag,
      got.catch((reason) => {
        console.error(`cushion-estimate: the words of ${tag} are not at ${address} (${reason.message}); English is shown.`);
        packs.delete(tag);
        return {};
      }),
    );
  }
  return packs.get(tag);
}
