import { defineCollection } from "astro:content";
import { checkedLoaders } from "./site/collections.ts";
import { astroSurroundings } from "./site/astro-surroundings.ts";

const loaders = checkedLoaders(astroSurroundings());

/** Everything people write, as checked collections. The loaders read all files at once and know the schemas. */
export const collections = {
  workouts: defineCollection({ loader: loaders.workouts }),
  athletes: defineCollection({ loader: loaders.athletes }),
  movements: defineCollection({ loader: loaders.movements }),
  warmUps: defineCollection({ loader: loaders.warmUps }),
  recovery: defineCollection({ loader: loaders.recovery }),
  cautions: defineCollection({ loader: loaders.cautions }),
  gyms: defineCollection({ loader: loaders.gyms }),
  competitions: defineCollection({ loader: loaders.competitions }),
  fields: defineCollection({ loader: loaders.fields }),
  bands: defineCollection({ loader: loaders.bands }),
  settings: defineCollection({ loader: loaders.settings }),
  unmade: defineCollection({ loader: loaders.unmade }),
  reading: defineCollection({ loader: loaders.reading }),
};
