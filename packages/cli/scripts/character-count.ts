/**
 * Stands in the bundle for the measuring of text in terminal columns that comes with the argument parser. The parser
 * needs it for its own help only, which is never printed, and the original builds a segmenter for all writing systems
 * when it is loaded: 25 ms, against 60 ms for the start of Node itself.
 */
export default (text: string): number => text.length;
