/**
 * CSS as far as a drawing needs it: style sheets and the elements that they speak of, media, variables, colours. The only place
 * that sees the library which parses CSS. What a property means to a drawing is not known here.
 */
package org.adumbrate.linework.svg.css;
