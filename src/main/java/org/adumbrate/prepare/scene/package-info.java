/**
 * The camera, the sun and the depth of a sheet, and the people, plants and birds that are placed in them. How a figure is placed
 * or hidden is computed in its own room.
 */
package org.adumbrate.prepare.scene;
