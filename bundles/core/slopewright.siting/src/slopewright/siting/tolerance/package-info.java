/** What a layout loses when units are set, levelled or placed a little wrong: sensitivities, worst case and chance. */
package slopewright.siting.tolerance;
