/**
 * What is remembered of sheets from one run to the next, by the content of all that it depends on; how far a run has come; what
 * runs beside what. What the remembered values mean is not known here.
 */
package org.adumbrate.prepare.memory;
