/** The diagram base: the view of the world that a window shows, and what the parts of a diagram share. */
package slopewright.ui.diagram;
