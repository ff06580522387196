/**
 * Strokes sorted by colour: how much a sheet draws in each, and which wanted colour one stands for. What a colour depicts is
 * guessed elsewhere, and files are not read here.
 */
package org.adumbrate.linework.sort;
