/** What the product is made of: licences, the notice and the list of materials, held against what is shipped. */
package slopewright.product;
