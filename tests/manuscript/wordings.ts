/** How manuscripts word numbers, in our own invention after the forms that they come in. */

/** One line each; the numbers between « and » measure nothing. */
export const NOTHING = `
This pattern is for personal use only. © «2025» Juniper Hill. All rights reserved. Page «1» of «6».
Edition «3», printed March «2024».
Join our Facebook group of «12,000» quilters
Sewalong starts «6» January and runs for «8» weeks.
Meet every «2nd» Tuesday, «7»–«9»pm
«7.30»pm
«19:30»
Fri «10»am–«4»pm, Sat «9»-«12»
workshop on Saturday «4» May, «10» to «4»
Each lesson takes «45» minutes
Allow «2» days
in under an hour, or «30» minutes if you are quick
baked at «180» degrees
sold in packs for $«4.99» each
was £«30», now £«25»
delivery is «3»-«5» working days
«2»–«4» weeks
size «70»/«10» Microtex
a «75»/«11» quilting needle
a No. «10» straw needle
Needles: size «9» sharps
Use a size «9» or «10» sharp
thread: «50» wt
«40»wt
use «2» strands of floss
two strands «two» strands
Stitch length: «2» mm
Set stitch length at «1.5»
a small stitch («1.8» mm)
sew with a «2» mm stitch
with a «2.5» stitch length
quilted «8» stitches to the inch
«28» mm cutter
a «12½»" x «12½»" square ruler
My favourite ruler, «8½»" x «24½»", is
a ruler at least «24»" long
ruler «6»" x «12»"
self-healing mat («24»" x «36»")
a «14»" hoop
masking tape «¼»" wide
a «1»" safety-pin
Size «2» curved safety pins
Bring a packed lunch, «2» pens and a notebook.
«1» iron between «4» people
(see Diagram «2»)
(Diag. «3»)
Figs «4»–«6»
Fig «1a»
see page «12»
on pages «14»–«15»
turn to p«7»
Follow step «4» on page «3»
After Step «3», press.
Repeat Steps «1»-«3»
Using the method of step «2» and step «3»
Refer back to steps «4» & «5»
Steps «2», «3» and «4» again
Part «1» of «3»
Block of the Month, month «6»
Clue «1»:
Border «1»
Border #«2»
Borders «1» and «2»
Row «1» and Row «2»
columns «1»–«4»
Section «B2»
Fabric A«3»
Colour «7» (plum)
Colours «3», «5» & «7»
Scrap bundle no. «4»
Nine-patch: «nine»-patch
a «16»-patch block
Two-colour: a «two»-colour quilt
a «three»-sided frame
«2»-ply
«100»% cotton
«3»/«4»% bigger
reduce to «75» percent
Rated «4» stars
for babies over «12» months
born in «1987»
when I was «7», my gran
«80» years ago
her «60»th birthday
a «60»° ruler
turn «90»°
a «90»-degree turn
turn it «180» degrees
rotate the block «90» degrees
twice, «twice»
do this «3» times
«three» more times
another «another» way
the other one «one»
one by «one»
from one «one» end to the other
on one «one» side only
this one «one»
each «one»
if you have «one»
which «one» do you like
«one» of my favourites
«one» day
one «One» evening
«One» more thing
«half» the work
«half» of the fun
ISBN «978»-1-234-56789-7
item «4021»-«7»
SKU: PL-«204»
Collection 'Meadow', «2024»
style #«3321»
Follow us @mill_«2»
hello@quilt«4»u.com
quilt«2»go.com/«123»
Tel: «01632» «960» «961»
ring +«61» 8 5550 «0123»
«12» Mill Lane, Ambleton «AB1» 2CD
Shop «4», «22» High Street
in «two» or «three» evenings
Difficulty «3/5»
colour «1387»
a size «10» or «11» between
«8» to «10» stitches per inch
«3» easy steps
a «2» day class
Copyright «2019»-«2024»
phone «0118» 496 «0123»
Springfield, OR «97477»
zigzag width «3»
tension «4»
walking foot «50»
ISO «9001»
all «4» corners
pattern «207»
quilt number «31»
an error in «one» border
sew a binding from «one» square
Press «both» strips
wash at «30»
«100»-percent cotton
at «Three» Oaks Farm
06 «12» 34 56 78
Posted: «3».«4».24
Sat «9»-«12»
«8» children
`;

/** The numbers between « and » measure something. */
export const SOMETHING = `
The quilt uses «12» blocks, page 3
See Fig. 2. «4» strips remain.
In Figure 2, «4» units meet
Refer to Figure 3 and sew «2» units
Refer to Figure 3. Sew «2» units
Repeat step 2 to make «8»
Repeat steps 2 and 3 to make «8» units.
Repeat Steps 1-3 for a total of «24» units.
Using Fabric 1, cut «6» strips
Using Fabrics 1 and 2, cut «6» strips
From Fabric 1: «6» squares 5"
From Fabric 1, cut: «6» squares
Fabric 4: cut «12» (3½" squares)
Fabric 1 («6» squares)
Border 1: «4» strips 2½"
Border 1: cut «4» strips
Border 2 — «2½»"
Row 1 — «3» blocks
Rows 1 and 3: «4» blocks each
Rows 1, 3 and 5 have «4» blocks each
Row 2, «5» blocks
Block 4: make «8»
Month 2: «6» blocks
Part 1: «24» HSTs
Day 1: cut «40» strips
July: «4» blocks
In May, «12» of us made one
May: «6» blocks
March: «6» blocks
You may «14»" it
On Saturday I cut «60» squares
the 1st of «4» borders
«3» borders
Cut «6» 42" strips
Cut «1» strip 4½" x WOF
Cut «1» 42" strip
Cut «60» A
You will use «52» of them
«12» rows of 12
Lay out «9» rows
Arrange «12» blocks in «4» rows of «3»
«4» x «3» blocks
a «4» x 5 layout
set «5» by «6»
setting: «5» across, «6» down
«8½»" x «11»" rectangle
cut «1» piece 18" x 22"
one fat quarter, «18»" x «22»"
1 fat eighth «9»" x «22»"
«2½»" strips
Cut strips «2.5» wide
strips at «2.5» intervals
cut at «2.15»"
Trim to «6.5» square
finishing at «6.5»
should finish at «12.5»
Make «80» half-square triangles
Cut «90» squares
«80» squares 3"
«100» squares
«14» squares
use «16» of the 20
discard «2»
«2» will be left over
gives «4»
yields «36»
«36» triangles in total
You should have «36».
for «36» in all
Total: «36»
Total «36» squares
Number of strips «7»
«7» strips (WOF)
WOF «42»"
«1⅛» yards
«6»" extra
Add «4»" to each side
leave «8»" tails
a «10»" tail
overlap «½»"
«½»" seam allowance
seam allowance «¼»"
every «4»"
«3»" apart
«2»" from the edge
pin every «4»"
lines «1»" apart
stitch «⅛»" from the edge
topstitch «⅛»" away
Stitch at «¼»"
stitch «2» rows
Sew «3» sides
Cut «2» lengths of 60"
Cut «2» widths
«2» widths of fabric
Piece «2» widths
the «two» halves
into «two» halves
«3» layers
«two» colours
«10» fabrics
«12» different prints
«12» assorted prints
Choose «12» light and 12 dark
Choose 12 light and «12» dark
«12» lights, 12 darks
«20» scraps
«1» jelly roll
«1» charm pack
charm pack («42» squares)
«42» charms
«6» FQ
«6» F8
F8: «6»
«24» leaves
«24» bells
«24» stems
«24» berries
«1» zip 14"
«6» buttons
«3» pillows
Makes «4» placemats
Makes «1» quilt
fits a «20»" cushion
for a «16»" pillow form
radius «8»"
arc of «12»"
circle «8»" diameter
1/8th «1/8th» of a circle
«8» wedges
«12» segments
I made «12» and gave 4 away
I used «14» prints
perimeter is «240»"
«240»" of binding
«6.14»m
«132»cm (52in)
2.4m («2⅝»yd)
«50» x 56 cm
size «50» x «56» cm
Make 2 more for «4» total
one from each fabric: «8» in all
«Two» of the blocks
sew the other «two»
Take «one» A strip
Add «one» square to each end
Sew «one» to each end
place «one» B square on top
«one» B square
one of the «12» blocks
For each of the «12» blocks
In each of the «4» corners
all «12» blocks
all «16» corner squares
all «4» corner squares
To the top add «2»
the «9» patches
«5»" wide, cut «3»
cut «3», each 5" wide
Fold each of the «4» strips in half
Fold the «4» squares in half
«40» 2½" squares
«40» — 2½" squares
«20» red, «20» blue
a dozen «a dozen» squares
«two» dozen squares
«200» squares of 2½"
«8» each of red and blue
cut with the ruler «6½»" strips
Place the ruler «2½»" from the edge
Lay the ruler on the «2½»" line
card template «4½»" square
cut «4» card templates
«15» steel-blue squares
«20» day-lily squares
«30» pin-dot squares
«30» reel-print squares
«10» chair pads
«3» tray cloths
pack of «40» strips
«8» cup coasters
use «one» strip
«One» horizontal seam joins the two panels
take two segments from step 1 and «one» segment from step 2
into «two» equal lengths of 1.5m
Cut «4» corner squares
Cut «one» corner square
Cut «one» side triangle
«4»x 3½" squares
Cut «4»pcs
Finished size «54» x «66»
Block size «12»
Panel «24» x «44»
Make «12» night squares
Baste «24» paper hexagons
Sew «15» stitch-and-flip units
In the diagram «4» blocks meet
Cut «2016» 2" squares
Join «both» panels
Cut «another» strip
From «one» strip, cut 8 squares
Measure «6»" with your ruler
in country style «4» blocks
In step 3 you made «12» units
«8» children's blocks
a «4»x«4» grid
Blocks: «12»/«20»/«30»
(«8»/«12»/«16»)
call «24» of them A
Quilt the «12» with thread
Sew «10» by needle
Cut «Four» Squares
The «Two» Strips
a «12»-block quilt
a «3»-strip set
«5» friends' blocks
Sides: «2½» x «36½»
«7» (9, 12) strips
7 («9», «12») strips
«2½» x WOF
`;
