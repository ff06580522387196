/**
 * The outlines of people, plants and birds: those that come with the program, and those that a person draws. An outline is
 * known here as a region that stands on its foot; where it stands on a sheet, and how large, is not.
 */
package org.adumbrate.figure.outline;
