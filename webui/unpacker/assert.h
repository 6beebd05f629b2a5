// a phone looks at what came out of it: nothing is asserted
