/** Item providers and intention-named recorded edits with undo and redo. */
package slopewright.edit;
