/** Rules about the equipment that an aid is made of. */
package slopewright.checks.internal.equipment;
