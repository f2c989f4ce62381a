/** Figures that paint the marks of scenes. */
package slopewright.ui.diagram.figures;
