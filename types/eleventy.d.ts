/** Eleventy 3 ships no declarations; these are the parts of it that the site uses. */
declare module '@11ty/eleventy' {
  export interface TemplateFunctions {
    /** From @11ty/eleventy-plugin-syntaxhighlight. */
    highlight(language: string, content: string): string;
  }

  export interface VirtualTemplate {
    data(): { readonly permalink: string; readonly eleventyExcludeFromCollections: boolean };
    render(this: TemplateFunctions): string;
  }

  export interface UserConfig {
    readonly ignores: Set<string>;
    readonly benchmarks: Readonly<
      Record<'config' | 'aggregate', { setMinimumThresholdPercent(percent: number): void }>
    >;
    addPlugin<Options>(plugin: (config: UserConfig, options: Options) => void, options: Options): void;
    addTemplate(inputPath: string, template: VirtualTemplate): void;
    addPassthroughCopy(paths: Readonly<Record<string, string>>): void;
    setInputDirectory(path: string): void;
    setOutputDirectory(path: string): void;
    setIncludesDirectory(path: string): void;
    setDataDirectory(path: string): void;
    setDataFileSuffixes(suffixes: readonly string[]): void;
    setTemplateFormats(formats: readonly string[]): void;
    setUseGitIgnore(use: boolean): void;
    setQuietMode(quiet: boolean): void;
    addGlobalData(name: string, value: unknown): void;
  }

  export interface EleventyOptions {
    readonly quietMode?: boolean;
    /** `false` looks for no configuration file in the current folder. */
    readonly configPath?: string | false;
    readonly config?: (config: UserConfig) => void | Promise<void>;
  }

  export default class Eleventy {
    constructor(input: string, output: string, options?: EleventyOptions);
    disableLogger(): void;
    write(): Promise<unknown>;
    /** Pages as they would be written. */
    toJSON(): Promise<readonly { readonly outputPath: string; readonly content: string }[]>;
  }
}

declare module '@11ty/eleventy-plugin-syntaxhighlight' {
  import type { UserConfig } from '@11ty/eleventy';

  export interface HighlightOptions {
    readonly languages?: readonly string[];
    readonly trim?: boolean;
    readonly lineSeparator?: string;
    readonly preAttributes?: Readonly<Record<string, string | number>>;
    readonly errorOnInvalidLanguage?: boolean;
    readonly templateFormats?: readonly string[];
  }

  function syntaxHighlight(config: UserConfig, options: HighlightOptions): void;
  namespace syntaxHighlight {
    function pairedShortcode(content: string, language: string, lines: string, options: HighlightOptions): string;
  }
  export default syntaxHighlight;
}
