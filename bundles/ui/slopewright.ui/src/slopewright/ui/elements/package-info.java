/** Tables of the elements of a project, one for each kind: made, typed, pasted, copied, sorted and removed there. */
package slopewright.ui.elements;
