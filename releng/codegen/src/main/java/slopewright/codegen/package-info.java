/** Generates the code of the model without an IDE. */
package slopewright.codegen;
