/** How edits are recorded and how lens heights follow the ground. */
package slopewright.edit.internal;
