// The languages that are not inside the wasm: fetched once for the page when an element first needs
// one, and handed to every instance. WORDS is put above this text by the builder, `loadWords` below it.

const texts = {}; // promise of the words of each language; nothing where they cannot be had

// The tag of a language whose words must be fetched; none for English and for one that nobody has.
const tagOf = (language) => {
  const tag = language.toLowerCase().split(/[-_]/)[0];
  return Object.hasOwn(WORDS, tag) ? tag : undefined;
};

const wordsOf = (tag) => (texts[tag] ??= loadWords(tag).catch((error) => lack(tag, error)));

const lack = (tag, reason) => {
  warn(`the words of "${tag}" are missing, so English is used. ${reason}`);
  texts[tag] = Promise.resolve();
};

// Whether an instance speaks a language as well as it ever will.
const knows = (instance, language) => {
  const tag = tagOf(language);
  return !tag || instance.dead || instance.words.has(tag);
};

const teach = async (instance, language) => {
  const tag = tagOf(language);
  const text = await wordsOf(tag);
  if (knows(instance, tag)) return;
  instance.words.add(tag);
  if (text && ask(instance, (rust) => rust.add_words(tag, text)) === false) lack(tag, "That is not the file.");
};
