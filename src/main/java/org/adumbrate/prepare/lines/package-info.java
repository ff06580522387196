/**
 * The line sheets of a sheet read, laid onto it and sorted, and all that is drawn of them: pens, cut, veils, profile, regions.
 * People and passes are not known here.
 */
package org.adumbrate.prepare.lines;
