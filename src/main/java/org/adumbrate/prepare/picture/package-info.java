/**
 * Pictures of a prepared sheet in memory, through any window and at any scale, from parts that are held from one to the next. They are the
 * same, sample by sample, as those that are delivered; nothing is written here.
 */
package org.adumbrate.prepare.picture;
