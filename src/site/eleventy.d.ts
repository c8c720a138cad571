/** The small part of Eleventy's interface that the site uses; the package ships no types. */
declare module '@11ty/eleventy' {
  export interface EleventyEvent {
    directories: { input: string; output: string };
    runMode: 'build' | 'serve' | 'watch';
  }

  export interface EleventyConfig {
    addGlobalData(name: string, value: unknown): void;
    addWatchTarget(path: string): void;
    setTemplateFormats(formats: string[]): void;
    setIncludesDirectory(path: string): void;
    setLayoutsDirectory(path: string): void;
    setDataDirectory(path: string): void;
    setUseGitIgnore(use: boolean): void;
    setQuietMode(quiet: boolean): void;
    setNunjucksEnvironmentOptions(options: { throwOnUndefined?: boolean; autoescape?: boolean }): void;
    ignores: Set<string>;
    on(event: 'eleventy.before' | 'eleventy.after', run: (event: EleventyEvent) => unknown): void;
  }

  export class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        configPath?: string | false;
        quietMode?: boolean;
        config?: (config: EleventyConfig) => unknown;
      },
    );
    disableLogger(): void;
    write(): Promise<unknown>;
  }
}
