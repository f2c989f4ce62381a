/** What a field does that is being typed into: its own cut, copy, paste and undo, which go before those of the project. */
package slopewright.ui.typing;
