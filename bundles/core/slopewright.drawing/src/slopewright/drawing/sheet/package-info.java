/** Scenes laid out on paper with captions, key and title block. */
package slopewright.drawing.sheet;
