import { speakAs, usualLocale } from '../src/base/units/index.js';

// Files that share a module graph come after one another: a command that the one before ran may have put the locale of its house in force.
speakAs(usualLocale);
