import type { UserConfig } from '@11ty/eleventy';

/** Sets Eleventy up for pages that are all virtual templates: it reads no file of its own accord, and says nothing. */
export function virtualPages(config: UserConfig): void {
  config.setQuietMode(true);
  // Quiet mode still prints what took long.
  config.benchmarks.config.setMinimumThresholdPercent(100);
  config.benchmarks.aggregate.setMinimumThresholdPercent(100);
  config.setTemplateFormats(['11ty.js']);
  config.setDataFileSuffixes([]);
  config.setUseGitIgnore(false);
  config.ignores.clear();
}
