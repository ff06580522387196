/**
 * The printed passes of a sheet: opened, placed, measured, and blended into whatever takes light. How they look is asked when
 * they are blended and not before.
 */
package org.adumbrate.prepare.passes;
