# Values that tests/published/kriging_reference_test.cpp holds the Gaussian process to.
#
# For development only: no check runs this. On Debian 12, where r-base has these packages:
#     Rscript tests/published/reference/kriging_reference.R
# writes wheat.csv (yields of a trial, Stroup & Baenziger 1994, Crop Science 34:62-66, as nlme ships it),
# wheat_fit.csv, topo.csv (heights of Davis 1973, Statistics and Data Analysis in Geology, table 6.4, as MASS
# ships it), topo_map.csv and topo_left_out.csv beside itself.
suppressMessages({library(MASS); library(nlme); library(spatial)})

script <- sub("^--file=", "", grep("^--file=", commandArgs(FALSE), value = TRUE))
here <- dirname(script)
provenance <- sprintf("# nlme %s, spatial %s, MASS %s, %s (Debian 12); Rscript tests/published/reference/kriging_reference.R",
                      packageVersion("nlme"), packageVersion("spatial"), packageVersion("MASS"), R.version.string)
write <- function(name, frame) {
  path <- file.path(here, name)
  writeLines(provenance, path)
  suppressWarnings(write.table(format(frame, digits = 15, trim = TRUE, scientific = FALSE), path, append = TRUE,
                               sep = ",", quote = FALSE, row.names = FALSE))
}
# nlme: range and nugget by maximum likelihood, the mean by generalized least squares; each block by itself.
wheat <- data.frame(block = as.integer(as.character(Wheat2$Block)), x = Wheat2$longitude, y = Wheat2$latitude,
                    value = Wheat2$yield)
wheat <- wheat[order(wheat$block), ]
write("wheat.csv", wheat)
control <- glsControl(msTol = 1e-12, tolerance = 1e-12, msMaxIter = 500, maxIter = 500, opt = "nlminb")
fits <- lapply(1:4, function(block) {
  fit <- gls(value ~ 1, data = wheat[wheat$block == block, ], method = "ML", control = control,
             correlation = corExp(c(5, 0.3), form = ~ x + y, nugget = TRUE))
  found <- coef(fit$modelStruct$corStruct, unconstrained = FALSE)
  data.frame(block, nugget = found[["nugget"]], range = found[["range"]], mean = coef(fit)[[1]],
             variance = fit$sigma^2, log_likelihood = as.numeric(logLik(fit)))
})
write("wheat_fit.csv", do.call(rbind, fits))
write("topo.csv", topo)

# spatial: the map and its standard error where range, nugget and variance are given.
range <- 2.5; nugget <- 0.15; sd <- 60
model <- function(data) surf.gls(0, expcov, data, d = range, alpha = nugget, nx = 10000)
map <- prmat(model(topo), 0.15, 6.35, 0.15, 6.25, 7)
error <- semat(model(topo), 0.15, 6.35, 0.15, 6.25, 7, se = sd)
grid <- expand.grid(x = map$x, y = map$y)
write("topo_map.csv", data.frame(grid, value = as.vector(map$z), standard_error = as.vector(error$z)))
left <- sapply(seq_len(nrow(topo)), function(i) {
  prmat(model(topo[-i, ]), topo$x[i], topo$x[i] + 1, topo$y[i], topo$y[i] + 1, 1)$z[1, 1]
})
write("topo_left_out.csv", data.frame(x = topo$x, y = topo$y, value = left))
