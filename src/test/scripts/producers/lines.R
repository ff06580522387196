# Draws the lines of a table (colour, x and y of both ends in points) with R's own devices.
told <- commandArgs(trailingOnly = TRUE)
lines <- read.csv(told[1], header = FALSE, colClasses = c("character", rep("numeric", 4)))
file <- function(name) file.path(told[2], name)
width <- as.numeric(told[3]); height <- as.numeric(told[4])

draw <- function() {
  par(mar = c(0, 0, 0, 0))
  plot.new()
  plot.window(c(0, width), c(0, height), xaxs = "i", yaxs = "i")
  segments(lines$V2, lines$V3, lines$V4, lines$V5, col = lines$V1, lwd = 0.6)
  invisible(dev.off())
}

pdf(file("r-pdf.pdf"), width / 72, height / 72); draw()
pdf(file("r-raw.pdf"), width / 72, height / 72, compress = FALSE, useDingbats = FALSE); draw()
pdf(file("r-cmyk.pdf"), width / 72, height / 72, colormodel = "cmyk"); draw()
pdf(file("r-grey.pdf"), width / 72, height / 72, colormodel = "gray"); draw()
cairo_pdf(file("r-cairo.pdf"), width / 72, height / 72); draw()
svg(file("r-svg.svg"), width / 72, height / 72); draw()
setEPS()
postscript(file("r.eps"), width = width / 72, height = height / 72, paper = "special"); draw()
