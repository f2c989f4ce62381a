/** Scenes and sheets written as files of general formats. */
package slopewright.drawing.paint;
