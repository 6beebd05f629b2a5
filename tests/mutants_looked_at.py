"""Changes that no test saw, looked at one by one (`make mutants`): how a change is named -> what it is.

"same: why" where the program does the same with it, so that no test could see it; else why no test asks for it.
"""
LOOKED_AT = {
}
