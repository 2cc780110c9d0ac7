/** Writes every generated file anew. Run: npm run generate */
import './prepare-units.js';
import './write-design-file-guide.js';
import './write-error-guide.js';
import './write-rules-shown.js';
import './write-validation.js';
import './write-stitch-validation.js';
