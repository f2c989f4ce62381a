/** Documents and drawings as tagged PDF and as pictures, in the face that comes with the product. */
package slopewright.report.internal.pdf;
