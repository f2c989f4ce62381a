/** What diagrams say. */
package slopewright.ui.diagram.internal;
