# What is bought beside the cloth: one file for each material, from lengths in nm to a quantity and a working sentence.
