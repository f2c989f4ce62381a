/** The plan editor. */
package slopewright.ui.plan;
