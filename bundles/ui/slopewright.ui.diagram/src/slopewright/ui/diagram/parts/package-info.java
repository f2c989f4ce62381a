/** Parts that stand between elements of the model and figures. */
package slopewright.ui.diagram.parts;
