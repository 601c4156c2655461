// Package ui is the page as vugu components. A component gets plain values, and
// every value that a gesture can change comes from one list of attributes.
package ui

//go:generate go tool vugugen -skip-go-mod -skip-main .
