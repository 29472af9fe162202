"""How moisture goes into and out of wood through its thickness, over hours, seasons and years.

``response`` a year of air · ``block`` legs and ends · ``marching``, ``events``, ``journey`` followed in
time · ``nonlinear`` what constant diffusivity neglects · ``transport``, ``finish``, ``exclusion`` the
figures · ``consequence`` width and cup · ``glue``, ``compression`` · ``meter``, ``acceptance`` at the bench
· ``spread``, ``year_spread``, ``learned`` how sure.
"""
