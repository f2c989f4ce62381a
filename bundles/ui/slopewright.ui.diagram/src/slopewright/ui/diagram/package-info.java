/** The diagram base: transforms, part base, scene painter and command wrapper. */
package slopewright.ui.diagram;
