/** What all rules say of an edit before it is made, for every view in which something can be dragged. */
package slopewright.ui.trial;
