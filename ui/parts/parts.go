// Package parts are the components that several places of the page are made of.
package parts

//go:generate go tool vugugen -skip-go-mod -skip-main .
