/** Tools of the mouse and of the keyboard. */
package slopewright.ui.plan.internal.tools;
