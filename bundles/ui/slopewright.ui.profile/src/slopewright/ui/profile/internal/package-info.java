/** What the views of the approach share. */
package slopewright.ui.profile.internal;
