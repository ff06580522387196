/**
 * Pens suggested for the colours of line sheets: what each colour seems to depict, told from its name, its shade and its
 * strokes, and the weight that suits it. A guess is given with its reason and nothing is drawn here.
 */
package org.adumbrate.linework.pens;
